create index spring_session_by_expiry on spring_session (expiry_time);
