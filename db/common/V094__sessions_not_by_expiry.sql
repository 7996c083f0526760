-- Each request moved its session in this index, the only one whose entries are taken out all the
-- time. After a crash H2 may wait for ever for such an entry. Sessions are few enough to look through.
drop index spring_session_by_expiry;
