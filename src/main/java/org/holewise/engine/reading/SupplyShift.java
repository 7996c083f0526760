package org.holewise.engine.reading;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.holewise.engine.quantity.Parameter;

/**
 * What measured supplies say about everything else: their sources are set to what was measured, and
 * what a reading shares with the supplies' readings is no longer uncertain (linear conditioning of
 * Gaussians; at most a few supplies).
 *
 * @param values of the assembly's parameters, the sources' moved
 * @param supplies forecasts of the supplies' own readings
 * @param inverse of those readings' covariance, supplies by supplies
 */
record SupplyShift(double[] values, List<Forecast> supplies, DMatrixRMaj inverse) {

  /** Where no supply was measured: every parameter at its nominal value. */
  static SupplyShift none(List<Parameter> parameters) {
    return new SupplyShift(
        parameters.stream().mapToDouble(Parameter::nominal).toArray(),
        List.of(),
        new DMatrixRMaj(0, 0));
  }

  /** Variance of a reading once the supplies are known, its own digits included. */
  double variance(Uncertainty uncertainty, Forecast forecast) {
    double[] shared =
        supplies.stream().mapToDouble(s -> uncertainty.covariance(s, forecast)).toArray();
    return Math.max(0, uncertainty.variance(forecast) - explained(shared));
  }

  /** Deviation that is left of one parameter. */
  double deviation(Uncertainty uncertainty, int parameter) {
    double variance = uncertainty.variances()[parameter];
    double[] shared =
        supplies.stream().mapToDouble(s -> s.slopes()[parameter] * variance).toArray();
    return Math.sqrt(Math.max(0, variance - explained(shared)));
  }

  /** Variance that the supplies' readings explain of something with these covariances to them. */
  private double explained(double[] shared) {
    if (shared.length == 0) {
      return 0;
    }
    var column = DMatrixRMaj.wrap(shared.length, 1, shared);
    var weighted = new DMatrixRMaj(shared.length, 1);
    CommonOps_DDRM.mult(inverse, column, weighted);
    return CommonOps_DDRM.dot(column, weighted);
  }
}
