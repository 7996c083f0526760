package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.solver.Circuit;

/**
 * The uncertain numbers of an assembly and how each condition has them. A condition may give a part
 * another value, whose error is then the same share, and need numbers that others do not.
 * Immutable.
 *
 * @param parameters of the first condition, then what other conditions have besides
 */
record Numbers(List<Parameter> parameters, Map<String, Own> conditions) {

  /**
   * One condition's numbers.
   *
   * @param place where each stands among all
   * @param scale by how much it moves when that moves by one
   * @param nominal its own value
   * @param same whether they are all the assembly's, in order
   */
  @SuppressWarnings("ArrayRecordComponent")
  private record Own(int[] place, double[] scale, double[] nominal, boolean same) {}

  /**
   * Those of an assembly.
   *
   * @param circuits its circuit in each condition
   */
  static Numbers of(Assembly assembly, Function<Condition, Circuit> circuits) {
    List<Condition> conditions = assembly.exercise().conditions();
    var all = new ArrayList<>(circuits.apply(conditions.get(0)).parameters());
    Map<String, Own> own = new LinkedHashMap<>();
    for (Condition condition : conditions) {
      boolean plain = condition == conditions.get(0) || condition.set().isEmpty();
      own.put(
          condition.name(),
          plain ? own(all, all) : own(circuits.apply(condition).parameters(), all));
    }
    return new Numbers(List.copyOf(all), own);
  }

  private static Own own(List<Parameter> some, List<Parameter> all) {
    Map<String, Integer> known = new LinkedHashMap<>();
    all.forEach(parameter -> known.putIfAbsent(parameter.name(), known.size()));
    int n = some.size();
    int[] place = new int[n];
    double[] scale = new double[n];
    double[] nominal = new double[n];
    boolean same = n == all.size();
    for (int k = 0; k < n; k++) {
      Parameter parameter = some.get(k);
      Integer at = known.get(parameter.name());
      if (at == null) {
        at = all.size();
        known.put(parameter.name(), at);
        all.add(parameter);
      }
      double usual = all.get(at).nominal();
      boolean shares = usual != parameter.nominal() && usual != 0 && parameter.nominal() != 0;
      place[k] = at;
      scale[k] = shares ? parameter.nominal() / usual : 1;
      nominal[k] = parameter.nominal();
      same &= at == k && usual == parameter.nominal();
    }
    return new Own(place, scale, nominal, same);
  }

  private Own in(Condition condition) {
    Own own = conditions.get(condition.name());
    if (own == null) {
      throw new IllegalArgumentException("no condition " + condition.name());
    }
    return own;
  }

  /** A condition's own values where the assembly's are these. */
  double[] in(Condition condition, double[] values) {
    Own own = in(condition);
    double[] result = new double[own.place.length];
    for (int k = 0; k < result.length; k++) {
      double usual = parameters.get(own.place[k]).nominal();
      double value = values[own.place[k]];
      result[k] = value == usual ? own.nominal[k] : own.nominal[k] + own.scale[k] * (value - usual);
    }
    return own.same ? values : result;
  }

  Forecast named(Condition condition, Forecast forecast) {
    Own own = in(condition);
    if (own.same && forecast.slopes().length == parameters.size()) {
      return forecast;
    }
    double[] slopes = new double[parameters.size()];
    for (int k = 0; k < own.place.length; k++) {
      slopes[own.place[k]] += own.scale[k] * forecast.slopes()[k];
    }
    return forecast.sloped(slopes);
  }
}
