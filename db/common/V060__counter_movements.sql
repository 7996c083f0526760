-- A mistake stays in the ledger, a second row takes the same back and names it, once.
alter table stock_movements add column counters bigint unique references stock_movements (id);
