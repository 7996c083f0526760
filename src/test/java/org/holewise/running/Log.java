package org.holewise.running;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.springframework.boot.test.system.CapturedOutput;

/** What the application says in its log while a test runs. */
public record Log(CapturedOutput output) {

  /** What was said after these words, in each line that has them, oldest first. */
  public List<String> after(String words) {
    var said = Pattern.compile(Pattern.quote(words) + "(\\S+)").matcher(output.getOut());
    return said.results().map((MatchResult line) -> line.group(1)).toList();
  }

  public List<String> setUpCodes() {
    return after("set-up code: ");
  }

  public List<String> demoTokens() {
    return after("demo API token: ");
  }
}
