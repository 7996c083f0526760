create unique index spring_session_by_id on spring_session (session_id);
