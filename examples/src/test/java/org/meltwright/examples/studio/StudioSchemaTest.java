// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.file.StudioSchema;
import org.meltwright.units.ProblemException;
import org.meltwright.units.UnitsProblem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The JSON Schema, the draft records, the reference page and the shipped files agree. */
class StudioSchemaTest {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  /** Wishes say how much is made; of any other recipe it is asked for. */
  private static final String ASKED_UNLESS_WISHED = "JobDraft.make";

  private static final Path REFERENCE = Path.of("..", "docs", "reference");

  private static Schema schema() {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(StudioSchema.text());
  }

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  @Test
  void the_schema_in_the_docs_is_the_one_generated_from_the_draft_records() throws IOException {
    Path file = REFERENCE.resolve("studio-file.schema.json");

    assertThat(Files.readString(file, StandardCharsets.UTF_8))
        .as("write it anew with StudioSchema")
        .isEqualTo(StudioSchema.text());
  }

  @Test
  void the_reference_page_has_the_fields_of_each_record() throws IOException {
    Path file = REFERENCE.resolve("studio-file.md");
    String page = Files.readString(file, StandardCharsets.UTF_8);
    String written = page;
    for (Class<?> type : StudioRecords.all()) {
      Matcher table =
          Pattern.compile("(<!-- fields of " + type.getSimpleName() + " -->\n)(?:\\|[^\n]*\n)+")
              .matcher(written);
      assertThat(table.find()).as("a table of " + type.getSimpleName()).isTrue();
      written = table.replaceAll("$1" + Matcher.quoteReplacement(StudioRecords.table(type)));
    }
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(file, written, StandardCharsets.UTF_8);
    } else {
      assertThat(page).isEqualTo(written);
    }
  }

  /** A field that is dropped is asked for, or it is not needed. */
  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "leftovers-studio.json"})
  void a_dropped_field_is_asked_for_where_it_is_needed(String name) throws IOException {
    JsonNode whole =
        MAPPER.readTree(Files.readString(Run.STUDIOS.resolve(name), StandardCharsets.UTF_8));
    List<String> dropped = new ArrayList<>();
    StudioRecords.walk(
        whole,
        (pointer, field) -> {
          JsonNode less = whole.deepCopy();
          String parent = pointer.substring(0, pointer.lastIndexOf('/'));
          ((ObjectNode) less.at(parent)).remove(pointer.substring(parent.length() + 1));
          boolean isNeeded = StudioRecords.isNeeded(field) || field.equals(ASKED_UNLESS_WISHED);
          assertThat(missingAt(less, pointer)).as(pointer).isEqualTo(isNeeded);
          dropped.add(field);
        });
    assertThat(dropped).hasSizeGreaterThan(80);
  }

  private static boolean missingAt(JsonNode tree, String pointer) {
    try {
      StudioFile.read(new ByteArrayInputStream(tree.toString().getBytes(StandardCharsets.UTF_8)));
      return false;
    } catch (ProblemException e) {
      return e.problems().stream()
          .anyMatch(p -> p.code() == UnitsProblem.FIELD_MISSING && p.path().equals(pointer));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-studio.json", "blocked-studio.json", "leftovers-studio.json"})
  void shipped_files_are_valid(String name) throws IOException {
    String json = Files.readString(Run.STUDIOS.resolve(name), StandardCharsets.UTF_8);

    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
  }

  /** What the program refuses for its shape, the schema refuses too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"stock\": \"730 g\" | \"stok\": \"730 g\"",
        "\"stock\": \"730 g\" | \"stock\": 730",
        "\"cups\": 12 | \"cups\": \"twelve\"",
        "\"town\": \"Niederlohbach\", | "
      })
  void files_of_another_shape_are_invalid(String from, String to) throws IOException {
    assertThat(demo()).contains(from);

    String json = demo().replace(from, to == null ? "" : to);
    assertThat(schema().validate(json, InputFormat.JSON)).isNotEmpty();
  }
}
