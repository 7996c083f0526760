-- The code on a student's card, as a hash, a new card replaces the one before.
create table cards (
  person bigint not null primary key references people (id),
  code_hash varchar(64) not null unique,
  made_at timestamp with time zone not null
);
