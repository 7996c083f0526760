create table hand_in_members (
  hand_in bigint not null references hand_ins (id),
  person bigint not null references people (id),
  primary key (hand_in, person)
);
