-- The truth: entries are only added, content is kept once by its hash, data of persons stand apart by a key.
create table journal (
    number ${number} primary key,
    at ${text} not null,
    desk ${text} not null,
    person ${text} not null,
    what ${text} not null,
    name ${text} not null,
    kind ${text} not null,
    data ${text} not null,
    reason ${text} not null,
    chain ${text} not null
);
create index journal_of on journal (what, name, number);

create table content (
    hash ${text} primary key,
    entry ${number} not null,
    bytes ${bytes} not null
);
create index content_of on content (entry);

create table person (
    person ${text} primary key,
    role ${text} not null,
    name ${text} not null,
    details ${text} not null,
    since ${text} not null,
    erased ${text} not null
);
create index person_named on person (name, role);

-- Sums over the journal: each can be made anew from it.
create table customer_order (
    name ${text} primary key,
    family ${text} not null,
    state ${text} not null,
    customer ${text} not null,
    partner ${text} not null,
    due ${text} not null,
    draft ${text} not null,
    version integer not null,
    confirmed integer not null,
    kit ${text} not null,
    catalogue ${text} not null,
    changed ${number} not null
);
create index customer_order_state on customer_order (state, due, name);
create index customer_order_kit on customer_order (kit);
create index customer_order_customer on customer_order (customer);

create table order_choice (
    order_name ${text} not null,
    option_name ${text} not null,
    option_value ${text} not null,
    primary key (order_name, option_name)
);
create index order_choice_value on order_choice (option_name, option_value, order_name);

create table quotation (
    order_name ${text} not null,
    version integer not null,
    entry ${number} not null,
    quoted_on ${text} not null,
    valid_until ${text} not null,
    currency ${text} not null,
    net ${text} not null,
    total ${text} not null,
    lead_days integer not null,
    content ${text} not null,
    kit ${text} not null,
    catalogue ${text} not null,
    figures ${text} not null,
    primary key (order_name, version)
);

create table kit_line (
    kit ${text} not null,
    line integer not null,
    level integer not null,
    position ${text} not null,
    part ${text} not null,
    revision ${text} not null,
    finish ${text} not null,
    quantity ${text} not null,
    unit ${text} not null,
    source ${text} not null,
    picked integer not null,
    tracked ${text} not null,
    drawing ${text} not null,
    issue ${text} not null,
    primary key (kit, line)
);
create index kit_line_part on kit_line (part, revision, kit);
create index kit_line_drawing on kit_line (drawing, issue, kit);

create table issued_sheet (
    order_name ${text} not null,
    entry ${number} not null,
    sheet ${text} not null,
    hash ${text} not null,
    primary key (order_name, entry, sheet)
);
