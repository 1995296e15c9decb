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
    resolved ${text} not null,
    catalogue ${text} not null
);
create index customer_order_state on customer_order (state, due, name);
-- What a recall tells of an order stands in the index itself.
create index customer_order_kit on customer_order (kit, name, state, customer);
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
    cost ${text} not null,
    primary key (order_name, version)
);

create index quotation_entry on quotation (entry);

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

create table order_change (
    order_name ${text} not null,
    number integer not null,
    entry ${number} not null,
    asker ${text} not null,
    state ${text} not null,
    from_kit ${text} not null,
    currency ${text} not null,
    net ${text} not null,
    lead_days integer not null,
    content ${text} not null,
    kit ${text} not null,
    catalogue ${text} not null,
    figures ${text} not null,
    cost ${text} not null,
    primary key (order_name, number)
);
create index order_change_state on order_change (state, order_name);

-- What of a change takes effect only when it is accepted.
create table change_choice (
    order_name ${text} not null,
    number integer not null,
    option_name ${text} not null,
    option_value ${text} not null,
    primary key (order_name, number, option_name)
);

create table order_work (
    order_name ${text} not null,
    part ${text} not null,
    revision ${text} not null,
    finish ${text} not null,
    stage ${text} not null,
    quantity ${text} not null,
    primary key (order_name, part, revision, finish, stage)
);

create table vehicle (
    order_name ${text} primary key,
    chassis ${text} not null
);
create index vehicle_chassis on vehicle (chassis);
create index vehicle_of_order on vehicle (order_name, chassis);

create table built_part (
    entry ${number} primary key,
    order_name ${text} not null,
    part ${text} not null,
    revision ${text} not null,
    quantity ${text} not null,
    serial ${text} not null,
    lot ${text} not null,
    heat ${text} not null,
    taken_out ${number} not null
);
create index built_part_order on built_part (order_name, entry);
create index built_part_part on built_part (part, revision, order_name);
create index built_part_serial on built_part (serial, part);
create index built_part_lot on built_part (lot, part);
create index built_part_heat on built_part (heat, part);

create table built_note (
    entry ${number} primary key,
    order_name ${text} not null,
    what ${text} not null,
    of_what ${text} not null,
    says ${text} not null,
    person ${text} not null
);
create index built_note_order on built_note (order_name, entry);
