-- Forms that were done, so that one which is sent twice is done once. No sum over the journal: it stays with this book.
create table form_sent (
    sent ${text} not null primary key,
    entry ${number} not null
);
create index form_sent_entry on form_sent (entry);

-- Who may sign in at a desk. Passwords are hashed; none of this is in the journal or an export.
create table desk_user (
    name ${text} not null primary key,
    roles ${text} not null,
    password ${text} not null
);
