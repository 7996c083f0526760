package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A bipolar transistor by the transport form of Ebers and Moll (1954, Proceedings of the IRE 42;
 * Getreu 1976, Modeling the Bipolar Transistor, chapter 2), terminals c, b, e: IF = IS·(exp(vbe/VT)
 * − 1), IR = IS·(exp(vbc/VT) − 1), ic = IF − IR·(1 + 1/βR), ib = IF/βF + IR/βR. All signs turn for
 * PNP. No Early effect, no resistances. The shift moves the base-emitter voltage at which a current
 * flows: IS is IS0·exp(−shift/VT). Stateless.
 *
 * @param sign 1 for NPN, −1 for PNP
 * @param thermal kT/q (V)
 * @param saturation IS0 (A)
 */
record BipolarLaw(
    int sign,
    double thermal,
    double saturation,
    double reverseGain,
    Parameter gain,
    Parameter shift)
    implements Device {

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(gain, shift);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double logIs = StrictMath.log(saturation) - p[1] / thermal;
    double is = StrictMath.exp(logIs);
    double be = logIs + sign * (v[1] - v[2]) / thermal;
    double bc = logIs + sign * (v[1] - v[0]) / thermal;
    double forward = Exponential.value(be) - is;
    double reverse = Exponential.value(bc) - is;
    double c = 1 + 1 / reverseGain;
    i[0] = sign * (forward - reverse * c);
    i[1] = sign * (forward / p[0] + reverse / reverseGain);
    i[2] = -i[0] - i[1];
    double floor = Junction.LEAST_SLOPE * is;
    double forwardRise = Exponential.slope(be);
    double reverseRise = Exponential.slope(bc);
    slopes(Math.max(forwardRise, floor), Math.max(reverseRise, floor), p[0], dv);
    dp[0] = 0;
    dp[2] = -sign * forward / (p[0] * p[0]);
    dp[4] = -dp[2];
    double byForward = -(forwardRise - is) / thermal;
    double byReverse = -(reverseRise - is) / thermal;
    dp[1] = sign * (byForward - byReverse * c);
    dp[3] = sign * (byForward / p[0] + byReverse / reverseGain);
    dp[5] = -dp[1] - dp[3];
  }

  /** di/dv from the slopes of the two exponentials; the sign turns twice. */
  private void slopes(double forwardRise, double reverseRise, double gain, double[] dv) {
    double f = forwardRise / thermal;
    double r = reverseRise / thermal;
    dv[0] = r * (1 + 1 / reverseGain);
    dv[1] = f - dv[0];
    dv[2] = -f;
    dv[3] = -r / reverseGain;
    dv[4] = f / gain + r / reverseGain;
    dv[5] = -f / gain;
    dv[6] = -dv[0] - dv[3];
    dv[7] = -dv[1] - dv[4];
    dv[8] = -dv[2] - dv[5];
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double be = sign * (v[1] - v[2]);
    double bc = sign * (v[1] - v[0]);
    double heldBe = limited(be, sign * (last[1] - last[2]), p[1]);
    double heldBc = limited(bc, sign * (last[1] - last[0]), p[1]);
    v[2] = v[1] - sign * heldBe;
    v[0] = v[1] - sign * heldBc;
    return heldBe != be || heldBc != bc;
  }

  private double critical(double shift) {
    return thermal * StrictMath.log(thermal / (StrictMath.sqrt(2) * saturation)) + shift;
  }

  /** As {@link Junction#limited}, of one junction without series resistance. */
  private double limited(double v, double last, double shift) {
    if (v <= last) {
      boolean steep = last >= Exponential.STEEP * thermal;
      return steep ? Math.min(v, Exponential.fallen(v, last, 0, thermal)) : v;
    }
    double bend = critical(shift);
    if (v <= bend) {
      return v;
    }
    if (last < bend - thermal) {
      return bend;
    }
    double rise = v - last;
    return rise <= 2 * thermal ? v : last + thermal * StrictMath.log1p(rise / thermal);
  }

  @Override
  public boolean carries(int in, int out) {
    return sign > 0 ? out != 1 : in != 1;
  }

  @Override
  public void start(double[] v, double[] p) {
    v[2] = v[1] - sign * critical(p[1]);
    v[0] = v[1];
  }
}
