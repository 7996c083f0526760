package org.holewise.school.roster;

import java.nio.file.Path;
import org.holewise.running.RunningSchool;

class BellOnH2IT extends BellContract {

  @Override
  RunningSchool start(Path data) {
    return RunningSchool.plain(data);
  }
}
