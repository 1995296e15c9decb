-- A form that is sent again after the line broke is answered as it was the first time, and nothing is done twice.
alter table journal add column once ${text} not null default '';
create index journal_once on journal (once) where once <> '';
create index journal_kind on journal (kind, at);
