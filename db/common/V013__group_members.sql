create table group_members (
  class_group bigint not null references class_groups (id),
  person bigint not null references people (id),
  primary key (class_group, person)
);
