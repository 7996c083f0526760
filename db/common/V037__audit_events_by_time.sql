create index audit_events_by_time on audit_events (happened_at);
