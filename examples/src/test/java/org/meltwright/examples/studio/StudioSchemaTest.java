// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.studio.file.StudioSchema;

/** The JSON Schema, the draft records, the reference page and the shipped files agree. */
class StudioSchemaTest {

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
  void the_reference_page_explains_every_field_in_the_words_of_the_schema() throws IOException {
    String page = Files.readString(REFERENCE.resolve("studio-file.md"), StandardCharsets.UTF_8);
    ResourceBundle fields = ResourceBundle.getBundle("org.meltwright.examples.studio.file.fields");

    for (String key : fields.keySet()) {
      String field = key.substring(key.indexOf('.') + 1);
      assertThat(page).contains("| `" + field + "` | ").contains(fields.getString(key));
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
