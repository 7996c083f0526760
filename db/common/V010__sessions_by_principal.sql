create index spring_session_by_principal on spring_session (principal_name);
