create index causes_by_hand_in on causes (hand_in, number);
