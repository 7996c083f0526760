package org.holewise.school.system;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says why there was no start, and what to do, in place of a stack trace. */
class RefusedStartAnalyzer extends AbstractFailureAnalyzer<RefusedStart> {

  @Override
  protected FailureAnalysis analyze(Throwable failure, RefusedStart refused) {
    return new FailureAnalysis(refused.getMessage(), refused.action(), failure);
  }
}
