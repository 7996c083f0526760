create index bench_members_by_bench on bench_members (bench);
