-- Since when a person's account is taken away. The row stays, since others point to it.
alter table people add column left_at timestamp with time zone;
