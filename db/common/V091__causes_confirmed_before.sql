insert into causes (number, hand_in, source, kind, place, note, made_by, made_at)
select row_number() over (order by id), hand_in, 'TEACHER', kind, place, note, made_by, made_at
from confirmations;
