// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Files with one slip each: none ends in a defect, and what is refused is told at its place. */
class DamagedFilesTest {

  private static final int VARIANTS = 200;
  private static final JsonMapper MAPPER = JsonMapper.shared();

  /** What only a programmer could know. */
  private static final Pattern INTERNAL =
      Pattern.compile(
          "Exception|jackson|org\\.meltwright|java\\.|Feature|REDACTED|StreamRead|\\btoken\\b"
              + "|Optional\\.|Draft\\b");

  private static final Pattern PLACE = Pattern.compile("(?m)^/|[Ll]ine \\d+|^\\(whole file\\)$");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json", "leftovers-studio.json"})
  void a_slip_is_told_at_its_place(String name) throws IOException {
    String whole = Files.readString(Run.STUDIOS.resolve(name), StandardCharsets.UTF_8);
    Random random = new Random(name.hashCode());
    int refused = 0;
    for (int i = 0; i < VARIANTS; i++) {
      String damaged = damaged(whole, random);
      refused += isRefused(damaged, name + " " + i) ? 1 : 0;
    }
    assertThat(refused).isGreaterThan(VARIANTS / 2);
  }

  private boolean isRefused(String damaged, String as) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.json"), damaged, StandardCharsets.UTF_8);
    Path page = folder.resolve("page.html");
    Files.deleteIfExists(page);
    Run run = Run.of("--page", page.toString(), file.toString());

    assertThat(run.exitCode()).as(as + run.err()).isIn(0, 1, StudioSheet.BAD_INPUT);
    if (run.exitCode() != StudioSheet.BAD_INPUT) {
      return false;
    }
    assertThat(page).as(as).doesNotExist();
    assertThat(run.out()).as(as).isEmpty();
    assertThat(run.err()).as(as).containsPattern(PLACE).doesNotContainPattern(INTERNAL);
    return true;
  }

  private static String damaged(String whole, Random random) {
    JsonNode tree = MAPPER.readTree(whole);
    List<String> fields = new ArrayList<>();
    StudioRecords.walk(tree, (pointer, field) -> fields.add(pointer));
    String pointer = fields.get(random.nextInt(fields.size()));
    int slash = pointer.lastIndexOf('/');
    ObjectNode parent = (ObjectNode) tree.at(pointer.substring(0, slash));
    String name = pointer.substring(slash + 1);
    JsonNode value = parent.get(name);
    switch (random.nextInt(7)) {
      case 0 -> parent.remove(name);
      case 1 -> parent.set(swapped(name, random), parent.remove(name));
      case 2 -> parent.put(name, random.nextInt(1000) - 500);
      case 3 -> parent.putArray(name).add("x").addNull();
      case 4 -> parent.put(name, value.asString("") + " xyz");
      case 5 -> parent.put(name, value.asString("").replaceAll("[a-zA-Z°%]+$", "kg"));
      default -> {
        String text = tree.toString();
        int at = random.nextInt(text.length());
        return text.substring(0, at) + text.substring(at + 1);
      }
    }
    return tree.toString();
  }

  private static String swapped(String name, Random random) {
    int at = random.nextInt(name.length() - 1);
    return name.substring(0, at) + name.charAt(at + 1) + name.charAt(at) + name.substring(at + 2);
  }
}
