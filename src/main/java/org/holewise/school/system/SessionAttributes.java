package org.holewise.school.system;

import java.sql.DatabaseMetaData;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;

/**
 * How something new in a browser's session is written. Two tabs that bring the same at once would
 * each insert a row under one key, and the slower one would be answered with an error: the later
 * one overwrites instead. What a tab brings to a session that another one has just ended is left
 * out.
 */
@Configuration(proxyBeanMethods = false)
class SessionAttributes {

  private static final String ON_H2 =
      """
      merge into %TABLE_NAME%_attributes (session_primary_id, attribute_name, attribute_bytes)
      key (session_primary_id, attribute_name)
      select s.primary_id, n.attribute_name, n.attribute_bytes
      from %TABLE_NAME% s
      join (select cast(? as char(36)) as id, cast(? as varchar(200)) as attribute_name,
        cast(? as varbinary) as attribute_bytes) n on n.id = s.primary_id
      """;

  private static final String ON_POSTGRESQL =
      """
      insert into %TABLE_NAME%_attributes (session_primary_id, attribute_name, attribute_bytes)
      select s.primary_id, n.attribute_name, n.attribute_bytes
      from %TABLE_NAME% s
      join (select cast(? as char(36)) as id, cast(? as varchar(200)) as attribute_name,
        cast(? as bytea) as attribute_bytes) n on n.id = s.primary_id
      on conflict (session_primary_id, attribute_name)
      do update set attribute_bytes = excluded.attribute_bytes
      """;

  @Bean
  SessionRepositoryCustomizer<JdbcIndexedSessionRepository> writtenOnce(DataSource data) {
    return sessions ->
        sessions.setCreateSessionAttributeQuery(isPostgres(data) ? ON_POSTGRESQL : ON_H2);
  }

  private static boolean isPostgres(DataSource data) {
    try {
      return JdbcUtils.extractDatabaseMetaData(data, DatabaseMetaData::getDatabaseProductName)
          .equals("PostgreSQL");
    } catch (MetaDataAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
