package org.holewise.document.shape;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * A text of JSON or YAML as a tree, and what is wrong with it as such. Depth, length of texts,
 * names and numbers, and the number of tokens are limited; YAML's aliases are refused, so that a
 * short text cannot stand for a huge tree.
 *
 * @param readable whether there is a tree that is worth reading
 * @param problems a single one where it is not readable; else names that stand twice, texts that
 *     are no Unicode, aliases
 */
public record DocumentTree(JsonNode root, boolean readable, List<Problem> problems) {
  private static final StreamReadConstraints LIMITS =
      StreamReadConstraints.builder()
          .maxNestingDepth(24)
          .maxStringLength(8_000)
          .maxNumberLength(60)
          .maxNameLength(400)
          .maxDocumentLength(9_000_000)
          .maxTokenCount(1_000_000)
          .build();
  private static final JsonFactory JSON =
      JsonFactory.builder().streamReadConstraints(LIMITS).build();
  private static final YAMLFactory YAML =
      YAMLFactory.builder().streamReadConstraints(LIMITS).build();

  public static DocumentTree json(byte[] document) {
    return read(JSON, factory -> factory.createParser(ObjectReadContext.empty(), document));
  }

  public static DocumentTree yaml(String document) {
    return read(YAML, factory -> factory.createParser(ObjectReadContext.empty(), document));
  }

  /** Reads the root by a function that says what is wrong with it, and so adds to the problems. */
  public <T> Read<T> read(Function<Place, Optional<T>> reader) {
    if (!readable) {
      return new Read.Malformed<>(problems);
    }
    var all = new Problems();
    problems.forEach(all::add);
    return all.outcome(reader.apply(new Place(root, "", all)));
  }

  /** The element of a list as a tree of its own. */
  public DocumentTree element(int index) {
    String prefix = "/" + index;
    var its =
        problems.stream()
            .filter(problem -> (problem.at() + "/").startsWith(prefix + "/"))
            .map(problem -> problem.below(prefix))
            .toList();
    return new DocumentTree(root.path(index), true, its);
  }

  private static DocumentTree read(
      TokenStreamFactory factory, Function<TokenStreamFactory, JsonParser> open) {
    var problems = new Problems();
    try (JsonParser parser = open.apply(factory)) {
      JsonNode root = new TreeReader(parser, problems).document();
      return new DocumentTree(root, problems.count() <= Problems.MOST, problems.list());
    } catch (JacksonException unreadable) {
      var where = unreadable.getLocation();
      int line = where == null ? 1 : where.getLineNr();
      int column = where == null ? 1 : where.getColumnNr();
      return unreadable(Problem.of("", "unreadable", Math.max(line, 1), Math.max(column, 1)));
    } catch (YamlEngineException unreadable) {
      return unreadable(Problem.of("", "unreadable", 1, 1));
    }
  }

  private static DocumentTree unreadable(Problem problem) {
    return new DocumentTree(JsonNodeFactory.instance.missingNode(), false, List.of(problem));
  }
}
