create index tries_by_what on tries (what_hash, tried_at);
