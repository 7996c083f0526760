package org.holewise.running;

import java.security.SecureRandom;
import java.time.Clock;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.TransactionManager;
import org.springframework.transaction.annotation.EnableTransactionManagement;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What a school keeps, on an empty database and with a clock moved by hand: every repository with
 * its transactions, and no pages.
 */
public final class Office implements AutoCloseable {

  private final AnnotationConfigApplicationContext context =
      new AnnotationConfigApplicationContext();
  private final HandClock clock = new HandClock();

  /** {@code more}: components besides the repositories. */
  public Office(Store store, Class<?>... more) {
    DataSource source = store.empty();
    Flyway.configure().dataSource(source).locations("classpath:db/common").load().migrate();
    var manager = new JdbcTransactionManager(source);
    context.registerBean(DataSource.class, () -> source);
    context.registerBean(JdbcClient.class, () -> JdbcClient.create(source));
    context.registerBean(TransactionManager.class, () -> manager);
    context.registerBean(TransactionTemplate.class, () -> new TransactionTemplate(manager));
    context.registerBean(Clock.class, () -> clock);
    context.registerBean(SecureRandom.class, () -> new SecureRandom());
    context.registerBean(
        PasswordEncoder.class, PasswordEncoderFactories::createDelegatingPasswordEncoder);
    context.register(Transactions.class);
    repositories();
    if (more.length > 0) {
      context.register(more);
    }
    context.refresh();
  }

  public <T> T part(Class<T> type) {
    return context.getBean(type);
  }

  public HandClock clock() {
    return clock;
  }

  @Override
  public void close() {
    context.close();
  }

  private void repositories() {
    var scanner = new ClassPathScanningCandidateComponentProvider(false);
    scanner.addIncludeFilter(new AnnotationTypeFilter(Repository.class));
    for (var found : scanner.findCandidateComponents("org.holewise.school")) {
      context.registerBeanDefinition(String.valueOf(found.getBeanClassName()), found);
    }
  }

  @EnableTransactionManagement(proxyTargetClass = true)
  private static class Transactions {}
}
