create index group_members_by_person on group_members (person);
