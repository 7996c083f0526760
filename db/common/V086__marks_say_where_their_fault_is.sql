alter table marks add column fault_place varchar(100) default '' not null;
