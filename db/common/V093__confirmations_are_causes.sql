drop table confirmations;
