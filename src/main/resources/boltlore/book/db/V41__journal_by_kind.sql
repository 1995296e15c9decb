-- What was ordered since a day is asked every morning.
create index journal_kind on journal (kind, at);
