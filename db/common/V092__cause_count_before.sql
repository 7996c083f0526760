insert into cause_count (id, causes) select 1, count(*) from causes;
