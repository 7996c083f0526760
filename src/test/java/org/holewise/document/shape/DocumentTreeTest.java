package org.holewise.document.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class DocumentTreeTest {

  private static DocumentTree json(String text) {
    return DocumentTree.json(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void saysWhereJsonBreaksOff() {
    var tree = json("{\"a\": 1,\n \"b\" 2}");
    assertThat(tree.readable()).isFalse();
    assertThat(tree.problems()).containsExactly(Problem.of("", "unreadable", 2, 6));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "{",
        "[1,]",
        "{\"a\":01}",
        "{} {}",
        "NaN",
        "'a'",
        "{a: 1}",
        "\"\\x\"",
        "// c\n1"
      })
  void takesOnlyJson(String text) {
    var tree = json(text);
    assertThat(tree.readable()).isFalse();
    assertThat(tree.problems()).hasSize(1);
    assertThat(tree.problems().get(0).text()).contains("line").contains("column");
  }

  @Test
  void refusesBytesThatAreNoText() {
    assertThat(DocumentTree.json(new byte[] {'"', (byte) 0xC3, '(', '"'}).readable()).isFalse();
  }

  @Test
  void limitsDepthAndLengths() {
    assertThat(json("[".repeat(24) + "]".repeat(24)).readable()).isTrue();
    assertThat(json("[".repeat(25) + "]".repeat(25)).readable()).isFalse();
    assertThat(json("[".repeat(200_000)).readable()).isFalse();
    assertThat(json("\"" + "x".repeat(8_001) + "\"").readable()).isFalse();
    assertThat(json("1".repeat(61)).readable()).isFalse();
    assertThat(json("{\"" + "x".repeat(401) + "\": 1}").readable()).isFalse();
  }

  @Test
  void namesEveryNameThatStandsTwiceAndGoesOn() {
    var tree = json("{\"a\": {\"b\": 1, \"b\": 2}, \"c\": [{\"d/e\": 1, \"d/e\": 1}]}");
    assertThat(tree.readable()).isTrue();
    assertThat(tree.problems())
        .containsExactly(
            Problem.of("/a/b", "name-twice", "b"), Problem.of("/c/0/d~1e", "name-twice", "d/e"));
  }

  @Test
  void namesNumbersThatAreTooLarge() {
    assertThat(json("[1e999, 2]").problems()).containsExactly(Problem.of("/0", "no-number"));
  }

  @Test
  void namesTextsThatAreNoUnicode() {
    var tree = json("{\"a\": \"\\ud800\", \"\\u0000\": 1, \"b\": \"\\ud83d\\ude00\"}");
    assertThat(tree.problems())
        .extracting(Problem::kind)
        .containsExactly("no-unicode", "no-unicode");
    assertThat(tree.root().path("a").stringValue()).isEqualTo("\uFFFD");
  }

  @Test
  void readsYaml() {
    var tree = DocumentTree.yaml("a: [1, 2.5, x y]\nb: {c: true, d: '5'}\ne: >\n  two\n  lines\n");
    assertThat(tree.problems()).isEmpty();
    assertThat(tree.root().toString())
        .isEqualTo(
            "{\"a\":[1.0,2.5,\"x y\"],\"b\":{\"c\":true,\"d\":\"5\"},\"e\":\"two lines\\n\"}");
  }

  @Test
  void refusesAliasesOfYaml() {
    var bomb = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (char name = 'b'; name <= 'k'; name++) {
      bomb.append(name).append(": &").append(name).append(" [");
      bomb.append(("*" + (char) (name - 1) + " ,").repeat(8)).append("*").append((char) (name - 1));
      bomb.append(" ]\n");
    }
    var tree = DocumentTree.yaml(bomb.toString());
    assertThat(tree.problems()).hasSize(90);
    assertThat(tree.problems().get(0)).isEqualTo(Problem.of("/b/0", "alias"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a: [1", "a: 1\n---\nb: 2", "a: 'x", "\ta: 1", "? [a]\n: 1", "a: !!binary x"})
  void takesOnlyOnePlainDocumentOfYaml(String text) {
    var tree = DocumentTree.yaml(text);
    assertThat(tree.readable() && tree.problems().isEmpty()).isFalse();
  }

  @Test
  void cutsABatchIntoElementsWithTheirOwnProblems() {
    var tree = json("[{\"a\": 1, \"a\": 1}, " + "0, ".repeat(10) + "{\"b\": 1, \"b\": 1}]");
    assertThat(tree.element(0).problems()).containsExactly(Problem.of("/a", "name-twice", "a"));
    assertThat(tree.element(1).problems()).isEmpty();
    assertThat(tree.element(11).problems()).containsExactly(Problem.of("/b", "name-twice", "b"));
    assertThat(List.of(tree.root().size())).containsExactly(12);
  }
}
