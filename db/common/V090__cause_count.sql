-- One row: how many causes there are. Who adds one locks it, so that numbers come in order.
create table cause_count (
  id smallint primary key check (id = 1),
  causes bigint not null
);
