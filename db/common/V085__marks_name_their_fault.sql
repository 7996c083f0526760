-- What a mark points to first, such as "column-off", empty where nothing.
alter table marks add column fault varchar(40) default '' not null;
