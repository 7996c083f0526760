-- What was the cause of a hand-in, appended and never changed. Numbers have no gaps, so that the
-- first of them are the same rows for ever. The last columns say what the mark had said by then.
create table causes (
  number bigint primary key,
  hand_in bigint not null references hand_ins (id),
  source varchar(10) not null check (source in ('TEACHER', 'REPAIR')),
  kind varchar(40) not null,
  place varchar(200) not null,
  note varchar(1000) not null,
  made_by bigint references people (id),
  made_at timestamp with time zone not null,
  pointed int,
  said double precision,
  was_so boolean
);
