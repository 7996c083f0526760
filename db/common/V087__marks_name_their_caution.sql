-- What can hurt a part or a person in the build as marked, empty where nothing.
alter table marks add column caution varchar(40) default '' not null;
