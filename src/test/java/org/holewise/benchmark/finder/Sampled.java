package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.holewise.benchmark.finder.Visit.Value;

/**
 * What an ailment's readings look like, from many benches that have it: numbers by their mean and
 * covariance, words by how often they came.
 */
final class Sampled {
  /** Log density of what never came. */
  private static final double NEVER = -14;

  private final List<String> ids;
  private final List<Map<String, Value>> draws = new ArrayList<>();

  Sampled(Setup setup, Ailment ailment, List<String> ids, int benches, Random random) {
    this.ids = ids;
    for (int i = 0; i < benches; i++) {
      draws.add(new Visit(ailment.truth(setup, random), random).readings());
    }
  }

  double logLikelihood(Map<String, Value> read) {
    double sum = 0;
    var numbers = new ArrayList<String>();
    for (String id : ids) {
      Value value = read.get(id);
      if (value == null) {
        continue;
      }
      long like =
          draws.stream()
              .map(draw -> draw.get(id))
              .filter(other -> other != null && other.word().equals(value.word()))
              .count();
      if (like < 3) {
        sum += NEVER;
      } else {
        sum += Math.log((like + 0.5) / (draws.size() + 1));
        if (value.amount()) {
          numbers.add(id);
        }
      }
    }
    return sum + normal(numbers, read);
  }

  private double normal(List<String> numbers, Map<String, Value> read) {
    int n = numbers.size();
    List<double[]> rows =
        draws.stream()
            .filter(draw -> numbers.stream().allMatch(id -> has(draw, id)))
            .map(draw -> numbers.stream().mapToDouble(id -> draw.get(id).number()).toArray())
            .toList();
    if (n == 0 || rows.size() < 3 * n) {
      return n == 0 ? 0 : NEVER;
    }
    double[] mean = new double[n];
    rows.forEach(
        row -> {
          for (int i = 0; i < n; i++) {
            mean[i] += row[i] / rows.size();
          }
        });
    var covariance = new DMatrixRMaj(n, n);
    for (double[] row : rows) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          covariance.add(i, j, (row[i] - mean[i]) * (row[j] - mean[j]) / (rows.size() - 1));
        }
      }
    }
    var off = new DMatrixRMaj(n, 1);
    for (int i = 0; i < n; i++) {
      double count = read.get(numbers.get(i)).count();
      covariance.add(i, i, count * count / 12);
      off.set(i, read.get(numbers.get(i)).number() - mean[i]);
    }
    var solved = new DMatrixRMaj(n, 1);
    if (!CommonOps_DDRM.solve(covariance, off, solved)) {
      return NEVER;
    }
    double square = CommonOps_DDRM.dot(off, solved);
    return -0.5 * (square + Math.log(CommonOps_DDRM.det(covariance)) + n * Math.log(2 * Math.PI));
  }

  private static boolean has(Map<String, Value> draw, String id) {
    Value value = draw.get(id);
    return value != null && value.amount();
  }
}
