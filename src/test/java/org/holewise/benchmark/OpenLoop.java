package org.holewise.benchmark;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Acts that begin at fixed times, however long those before them take: who is late waits, as people
 * do. A time runs from when an act should have begun.
 */
final class OpenLoop implements AutoCloseable {

  private static final int THREADS = 256;
  private static final Duration PATIENCE = Duration.ofMinutes(3);

  private final ScheduledExecutorService threads = Executors.newScheduledThreadPool(THREADS);

  /** One of the acts; throws where it fails. */
  interface Act {
    void run(int number) throws Exception;
  }

  /** How long the acts took (ms, sorted), and why some failed. */
  record Times(double[] millis, List<String> errors) {

    double at(double share) {
      int rank = (int) Math.ceil(share * millis.length);
      return millis.length == 0 ? Double.NaN : millis[Math.max(rank, 1) - 1];
    }

    /** The same shares of both, as a multiple of the other. */
    String over(Times other) {
      return "50 %% %.1f times, 95 %% %.1f times, 99 %% %.1f times a bare insert"
          .formatted(at(0.5) / other.at(0.5), at(0.95) / other.at(0.95), at(0.99) / other.at(0.99));
    }

    @Override
    public String toString() {
      return "50 %% %.0f ms, 95 %% %.0f ms, 99 %% %.0f ms, longest %.0f ms; %d done, %d failed %s"
          .formatted(
              at(0.5),
              at(0.95),
              at(0.99),
              at(1),
              millis.length,
              errors.size(),
              errors.stream().distinct().limit(3).toList());
    }
  }

  Times run(int acts, double aSecond, Act act) throws InterruptedException {
    long start = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(100);
    var running = new ArrayList<Future<Double>>();
    for (int i = 0; i < acts; i++) {
      int number = i;
      long due = start + (long) (i / aSecond * 1e9);
      running.add(
          threads.schedule(
              () -> timed(act, number, due), due - System.nanoTime(), TimeUnit.NANOSECONDS));
    }
    return gathered(running);
  }

  private static double timed(Act act, int number, long due) throws Exception {
    act.run(number);
    return (System.nanoTime() - due) / 1e6;
  }

  private static Times gathered(List<Future<Double>> running) throws InterruptedException {
    var millis = new ArrayList<Double>();
    var errors = new ArrayList<String>();
    for (var each : running) {
      try {
        millis.add(each.get(PATIENCE.toSeconds(), TimeUnit.SECONDS));
      } catch (ExecutionException failed) {
        errors.add(String.valueOf(failed.getCause()));
      } catch (TimeoutException late) {
        errors.add("no answer");
      }
    }
    double[] sorted = millis.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return new Times(sorted, errors);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
