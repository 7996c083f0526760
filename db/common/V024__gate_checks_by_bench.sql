create index gate_checks_by_bench on gate_checks (bench);
