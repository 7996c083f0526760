create index looks_by_bench on looks (bench);
