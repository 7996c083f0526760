package org.holewise.school.system;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/** A form gives a record what its constructor asks for; other names that are sent mean nothing. */
@ControllerAdvice(annotations = Controller.class)
class FormAdvice {

  @InitBinder
  void bindOnlyWhatIsAskedFor(WebDataBinder binder) {
    binder.setDeclarativeBinding(true);
  }
}
