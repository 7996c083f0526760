create index help_calls_by_bench on help_calls (bench);
