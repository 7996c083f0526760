-- One row: whose data this is, and the hash of the set-up code that waits to be used.
create table installation (
  id smallint primary key check (id = 1),
  kind varchar(10) not null check (kind in ('DEMO', 'SCHOOL')),
  set_up_code_hash varchar(64),
  made_at timestamp with time zone not null,
  set_up_at timestamp with time zone
);
