-- A draft, entry by entry, as typed. An entry that was taken out keeps its row with an empty text.
create table draft_entries (
  bench bigint not null references benches (id),
  name varchar(100) not null,
  text varchar(1000) not null,
  revision bigint not null,
  made_at timestamp with time zone not null,
  written_by bigint not null references people (id),
  written_at timestamp with time zone not null,
  primary key (bench, name)
);
