// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static java.util.Objects.requireNonNull;
import static org.meltwright.units.MetricUnits.grams;

import com.sun.net.httpserver.HttpServer;
import jakarta.validation.constraints.NotBlank;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.batch.WeighingSheetData;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.json.JsonEndpoint;
import org.meltwright.examples.json.LoopbackServer;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.constraint.QuantityText;
import org.meltwright.units.constraint.TextKind;

/** Answers: how does an app embed the library behind HTTP? JSON in; results or all problems out. */
public final class SmallService {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final Balance BALANCE = Balance.of("kitchen balance", grams(5000), grams(1));

  /** What is asked, as it was written. */
  record Question(
      @NotBlank @Nullable String material,
      @NotBlank @Nullable String to,
      @NotBlank @Nullable String ratio,
      @NotBlank @QuantityText(kind = TextKind.MASS, positive = true) @Nullable String mass) {}

  private SmallService() {}

  /**
   * Serves on the loopback interface until stopped.
   *
   * @param args the port; 0 or none for any that is free
   * @throws IOException if the port is taken
   */
  public static void main(String[] args) throws IOException {
    HttpServer server = start(args.length == 0 ? 0 : Integer.parseInt(args[0]));
    System.out.println("POST to http://localhost:" + server.getAddress().getPort() + "/weigh");
  }

  static HttpServer start(int port) throws IOException {
    HttpServer server = LoopbackServer.create(port);
    server.createContext("/weigh", JsonEndpoint.of(Question.class, SmallService::weigh));
    server.start();
    return server;
  }

  private static WeighingSheetData weigh(Question checked, Locale locale) {
    QuantityParser parser = QuantityParser.localeFree();
    Material given = CATALOGUE.require(requireNonNull(checked.material()));
    Material to = CATALOGUE.require(requireNonNull(checked.to()));
    var ratio = parser.parseMixingRatio(requireNonNull(checked.ratio()), to.id(), given.id());
    var mass = parser.parseMass(requireNonNull(checked.mass()));
    Recipe recipe = Recipe.ofRatio("mix", ratio, Map.of(to.id(), to, given.id(), given));
    Batch batch = Batch.ofIngredient(recipe, given, mass, Losses.NONE);
    return WeighingSheetData.of(WeighingSheet.of(batch, List.of(BALANCE)), locale);
  }
}
