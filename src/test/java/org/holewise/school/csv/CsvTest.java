package org.holewise.school.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, and what OWASP asks of files that spreadsheets open. */
@Tag("fast")
class CsvTest {

  @Test
  void endsEveryRecordWithCrLf() {
    // RFC 4180, 2.1.
    assertThat(table(List.of("a", 1), List.of("b", 2)).text())
        .isEqualTo("Item,Count\r\na,1\r\nb,2\r\n");
  }

  @Test
  void quotesWhatWouldBreakARecord() {
    // RFC 4180, 2.6 and 2.7.
    assertThat(table(List.of("so \"called\"", 1), List.of("a, b", 2), List.of("x\r\ny", 3)).text())
        .isEqualTo("Item,Count\r\n\"so \"\"called\"\"\",1\r\n\"a, b\",2\r\n\"x\r\ny\",3\r\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@sum",
        "\ttab",
        "\rreturn",
        "\nline",
        "\0null",
        "=HYPERLINK(\"x\",\"y\")",
        "\uFF1D1",
        "\uFF0B1",
        "\uFF0D1",
        "\uFF20a"
      })
  void makesTextThatStartsAFormulaPlain(String text) throws IOException {
    // OWASP ASVS 5.0, 1.2.10 (= + - @ tab null, by an apostrophe); OWASP, CSV Injection (the rest).
    assertThat(read(table(List.of(text, 1))).get(1).get(0)).isEqualTo("'" + text);
  }

  @Test
  void leavesNumbersToBeCountedWith() {
    var csv =
        new Csv(
            List.of("a", "b", "c", "d"),
            List.of(List.of(-3, 1e-7, new BigDecimal("1E+3"), 12345678901L)));
    assertThat(csv.text()).isEqualTo("a,b,c,d\r\n-3,0.00000010,1000,12345678901\r\n");
  }

  @Test
  void isReadBackAsItWas() throws IOException {
    var texts = List.of("", " spaced ", "330 Ω", "a\"b,c\nd", "don't", "µ #1");
    var rows = texts.stream().map(text -> List.of(text, 7)).toList();
    var read = read(new Csv(List.of("Item", "Count"), rows));
    assertThat(read).hasSize(texts.size() + 1);
    for (int i = 0; i < texts.size(); i++) {
      assertThat(read.get(i + 1).toList()).containsExactly(texts.get(i), "7");
    }
  }

  @Test
  void makesTheHeaderSafeToo() {
    assertThat(new Csv(List.of("=a"), List.of()).text()).isEqualTo("'=a\r\n");
  }

  @Test
  void refusesARowOfAnotherLength() {
    assertThatThrownBy(() -> table(List.of("a"))).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void isSentAsAFileInUtf8() {
    var answer = table(List.of("330 Ω", 1)).file("orders.csv");
    assertThat(answer.getHeaders().getFirst("Content-Type"))
        .isEqualTo("text/csv;charset=UTF-8;header=present");
    assertThat(answer.getHeaders().getContentDisposition().isAttachment()).isTrue();
    assertThat(answer.getHeaders().getContentDisposition().getFilename()).isEqualTo("orders.csv");
    assertThat(new String(answer.getBody(), StandardCharsets.UTF_8))
        .isEqualTo("\uFEFFItem,Count\r\n330 Ω,1\r\n");
  }

  private static Csv table(List<?>... rows) {
    return new Csv(List.of("Item", "Count"), List.of(rows));
  }

  private static List<CSVRecord> read(Csv csv) throws IOException {
    return CSVParser.parse(csv.text(), CSVFormat.RFC4180).getRecords();
  }
}
