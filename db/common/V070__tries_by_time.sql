create index tries_by_time on tries (tried_at);
