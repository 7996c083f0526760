package org.holewise;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the school's server: plain from the packaged jar, a demo school from the build. */
@SpringBootApplication
public class HolewiseApplication {

  public static void main(String[] args) {
    SpringApplication.run(HolewiseApplication.class, args);
  }
}
