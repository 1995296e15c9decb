-- Sums over the journal: what lies in the stores, what is on its way, what the rooms have done.
create table stock (
    part ${text} not null,
    finish ${text} not null,
    lot ${text} not null,
    serial ${text} not null,
    bin ${text} not null,
    quantity ${text} not null,
    primary key (part, finish, lot, serial, bin)
);
create index stock_lot on stock (lot, part);
create index stock_serial on stock (serial, part);

create table reservation (
    order_name ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    quantity ${text} not null,
    primary key (order_name, part, finish)
);
create index reservation_part on reservation (part, finish);

create table issued_part (
    order_name ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    lot ${text} not null,
    serial ${text} not null,
    bin ${text} not null,
    instead ${text} not null,
    concession ${text} not null,
    quantity ${text} not null,
    entry ${number} not null,
    primary key (order_name, part, finish, lot, serial, bin, instead, concession)
);
create index issued_part_of on issued_part (part, finish, order_name);
create index issued_part_lot on issued_part (lot, part);
create index issued_part_serial on issued_part (serial, part);

create table received_serial (
    part ${text} not null,
    serial ${text} not null,
    purchase ${text} not null,
    entry ${number} not null,
    primary key (part, serial)
);

create table purchase (
    purchase ${text} primary key,
    supplier ${text} not null,
    currency ${text} not null,
    placed_on ${text} not null,
    state ${text} not null,
    entry ${number} not null
);
create index purchase_state on purchase (state, supplier);

create table purchase_line (
    purchase ${text} not null,
    part ${text} not null,
    line integer not null,
    order_code ${text} not null,
    quantity ${text} not null,
    unit ${text} not null,
    unit_cost ${text} not null,
    due ${text} not null,
    received ${text} not null,
    primary key (purchase, part)
);
create index purchase_line_part on purchase_line (part, purchase);

create table pick_short (
    order_name ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    missing ${text} not null,
    entry ${number} not null,
    primary key (order_name, part, finish)
);

create table picked_order (
    order_name ${text} primary key,
    entry ${number} not null
);

create table coat_piece (
    piece ${text} primary key,
    order_name ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    state ${text} not null,
    load ${text} not null,
    again integer not null,
    entry ${number} not null
);
create index coat_piece_state on coat_piece (state, finish, piece);
create index coat_piece_order on coat_piece (order_name, piece);
create index coat_piece_load on coat_piece (load, piece);

create table remnant (
    remnant ${text} primary key,
    material ${text} not null,
    length_mm ${text} not null,
    heat ${text} not null,
    left_by ${text} not null,
    used_by ${text} not null,
    entry ${number} not null
);
create index remnant_free on remnant (used_by, material);

create table judged_record (
    order_name ${text} not null,
    entry ${number} not null,
    of_what ${text} not null,
    content ${text} not null,
    passed integer not null,
    findings ${text} not null,
    primary key (order_name, entry)
);
