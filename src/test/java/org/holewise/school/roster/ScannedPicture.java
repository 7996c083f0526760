package org.holewise.school.roster;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.regex.Pattern;

/** A picture on a card as a phone reads it: from the squares that are drawn. */
final class ScannedPicture {

  private static final Pattern SQUARE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");

  private ScannedPicture() {}

  /** What the squares of a path say; the shape must be nothing but unit squares. */
  static String read(int size, String path) throws ChecksumException, FormatException {
    if (!SQUARE.matcher(path).replaceAll("").isEmpty()) {
      throw new IllegalArgumentException("not only squares: " + path);
    }
    var modules = new BitMatrix(size);
    SQUARE
        .matcher(path)
        .results()
        .forEach(s -> modules.set(Integer.parseInt(s.group(1)), Integer.parseInt(s.group(2))));
    return new Decoder().decode(modules).getText();
  }
}
