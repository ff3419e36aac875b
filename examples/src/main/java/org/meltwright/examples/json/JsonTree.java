// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A JSON text as a tree, read within bounds: hostile text is refused in bounded time and memory.
 *
 * <p>A key that stands twice is a problem of the tree, and its first value counts; text that is not
 * JSON, too long or too deep has no tree.
 *
 * @param root the tree
 * @param problems the keys that stand twice
 */
public record JsonTree(JsonNode root, List<Problem> problems) {

  /** The longest text, in bytes: 1 MiB. */
  public static final int MOST_BYTES = 1 << 20;

  /** The deepest nesting of objects and arrays. */
  public static final int MOST_DEPTH = 32;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(MOST_DEPTH).build())
          .build();

  public JsonTree {
    problems = List.copyOf(problems);
  }

  /**
   * Reads a text.
   *
   * @param in the text in UTF-8; read up to one byte more than {@link #MOST_BYTES}
   * @return the tree
   * @throws ProblemException if the text is too long, too deep or not JSON
   * @throws IOException if it cannot be read
   */
  public static JsonTree read(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw new ProblemException(
          Problem.of(JsonProblem.TOO_LARGE, JsonProblem.CHECK.name("more than that"))
              .with("most", Integer.toString(MOST_BYTES)));
    }
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), bytes)) {
      return new Builder(parser, bytes).build();
    } catch (StreamConstraintsException e) {
      throw new ProblemException(
          Problem.of(JsonProblem.TOO_DEEP, JsonProblem.CHECK.name("more than that"))
              .with("most", Integer.toString(MOST_DEPTH)));
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      throw new ProblemException(JsonSlip.at(bytes, at.getLineNr(), at.getColumnNr()));
    }
  }

  /** Builds the tree from tokens, so that every double key is found and named. */
  private static final class Builder {

    private final JsonParser parser;
    private final byte[] bytes;
    private final List<Problem> problems = new ArrayList<>();

    Builder(JsonParser parser, byte[] bytes) {
      this.parser = parser;
      this.bytes = bytes;
    }

    JsonTree build() {
      parser.nextToken();
      JsonNode root = value("");
      if (parser.nextToken() != null) {
        TokenStreamLocation at = parser.currentTokenLocation();
        throw new ProblemException(JsonSlip.after(bytes, at.getLineNr(), at.getColumnNr()));
      }
      return new JsonTree(root, problems);
    }

    private ProblemException slip(TokenStreamLocation at) {
      return new ProblemException(JsonSlip.at(bytes, at.getLineNr(), at.getColumnNr()));
    }

    private JsonNode value(String path) {
      JsonNodeFactory nodes = JsonNodeFactory.instance;
      JsonToken token = parser.currentToken();
      if (token == null) {
        throw slip(parser.currentLocation());
      }
      return switch (token) {
        case START_OBJECT -> object(path);
        case START_ARRAY -> array(path);
        case VALUE_STRING -> nodes.stringNode(parser.getString());
        case VALUE_NUMBER_INT -> integer(nodes);
        case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDoubleValue());
        case VALUE_TRUE -> nodes.booleanNode(true);
        case VALUE_FALSE -> nodes.booleanNode(false);
        default -> nodes.nullNode();
      };
    }

    /** An integer that fits, else a double, which no field takes. */
    private JsonNode integer(JsonNodeFactory nodes) {
      return parser.getNumberType() == JsonParser.NumberType.INT
          ? nodes.numberNode(parser.getIntValue())
          : nodes.numberNode(parser.getDoubleValue());
    }

    private ObjectNode object(String path) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String key = parser.currentName();
        String below = path + JsonPointers.step(key);
        parser.nextToken();
        JsonNode value = value(below);
        if (node.has(key)) {
          problems.add(Problem.of(JsonProblem.DUPLICATE_KEY, key).under(below));
        } else {
          node.set(key, value);
        }
      }
      return node;
    }

    private ArrayNode array(String path) {
      ArrayNode node = JsonNodeFactory.instance.arrayNode();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        node.add(value(path + "/" + node.size()));
      }
      return node;
    }
  }
}
