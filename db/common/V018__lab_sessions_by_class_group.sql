create index lab_sessions_by_class_group on lab_sessions (class_group);
