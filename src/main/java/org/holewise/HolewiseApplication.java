package org.holewise;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.FullyQualifiedAnnotationBeanNameGenerator;

/**
 * Starts the school's server: plain from the packaged jar, a demo school from the build. Its parts
 * are named by their whole class names, since packages use the same nouns.
 */
@SpringBootApplication(nameGenerator = FullyQualifiedAnnotationBeanNameGenerator.class)
public class HolewiseApplication {

  public static void main(String[] args) {
    SpringApplication.run(HolewiseApplication.class, args);
  }
}
