package org.holewise.school.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;

/**
 * A table as RFC 4180 writes it. A text that a spreadsheet might take for a formula gets an
 * apostrophe in front (OWASP Application Security Verification Standard 5.0, requirement 1.2.10;
 * OWASP, CSV Injection); a number stays one, with a point and no exponent. Immutable.
 *
 * @param header a name for each column
 * @param rows cells as {@link Number} or as anything else whose text is shown; as many as columns
 */
public record Csv(List<String> header, List<? extends List<?>> rows) {

  /** The formula signs and their full-width forms, and what may hide one from the eye. */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20";

  /**
   * Says UTF-8 to a spreadsheet on Windows, which else reads a file as its own code page and shows
   * "Î©" for "Ω". Part of files alone: RFC 4180 knows of none, and who reads {@link #text} has
   * text.
   */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final String TYPE = "text/csv;charset=UTF-8;header=present";

  public Csv {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<?> row : rows) {
      if (row.size() != header.size()) {
        throw new IllegalArgumentException(header + " does not fit " + row);
      }
    }
  }

  public String text() {
    var text = new StringBuilder();
    try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(cells(header));
      for (List<?> row : rows) {
        printer.printRecord(cells(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory was not written", e);
    }
    return text.toString();
  }

  /** The answer that a browser keeps as a file of this name. */
  public ResponseEntity<byte[]> file(String name) {
    var disposition =
        ContentDisposition.attachment().filename(name, StandardCharsets.UTF_8).build();
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_TYPE, TYPE)
        .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
        .body((BYTE_ORDER_MARK + text()).getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> cells(List<?> row) {
    return row.stream().map(Csv::cell).toList();
  }

  private static String cell(Object cell) {
    return cell instanceof Number number ? plain(number) : safe(cell.toString());
  }

  private static String plain(Number number) {
    return new BigDecimal(number.toString()).toPlainString();
  }

  private static String safe(String text) {
    boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
