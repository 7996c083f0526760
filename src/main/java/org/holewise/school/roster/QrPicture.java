package org.holewise.school.roster;

import io.nayuki.qrcodegen.QrCode;

/**
 * A QR code (ISO/IEC 18004) as one path of an SVG, a unit square a module.
 *
 * @param size modules a side, without the quiet zone
 */
record QrPicture(int size, String path) {

  /** Light modules that the standard wants on each side. */
  static final int QUIET = 4;

  static QrPicture of(String text) {
    var code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    var path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return new QrPicture(code.size, path.toString());
  }

  /** What an SVG shows of it, quiet zone and all. */
  public String viewBox() {
    int side = size + 2 * QUIET;
    return -QUIET + " " + -QUIET + " " + side + " " + side;
  }
}
