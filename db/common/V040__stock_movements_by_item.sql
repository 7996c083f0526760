create index stock_movements_by_item on stock_movements (item);
