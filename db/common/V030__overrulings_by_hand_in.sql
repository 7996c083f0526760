create index overrulings_by_hand_in on overrulings (hand_in);
