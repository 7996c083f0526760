-- Who works where: one bench a session for each student.
create table bench_members (
  lab_session bigint not null references lab_sessions (id),
  person bigint not null references people (id),
  bench bigint not null references benches (id),
  joined_at timestamp with time zone not null,
  primary key (lab_session, person)
);
