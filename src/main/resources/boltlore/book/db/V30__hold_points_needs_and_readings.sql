-- What the trades found of a kit, and what it asks of the stores, are kept with what was quoted or proposed.
alter table quotation add column findings ${text} not null default '';
alter table quotation add column needs ${text} not null default '';
alter table order_change add column findings ${text} not null default '';
alter table order_change add column needs ${text} not null default '';

-- What was still to come when the picking was called complete; the kit in its crates; bags counted a second time.
alter table picked_order add column still_open ${text} not null default '';

create table packed_order (
    order_name ${text} primary key,
    crates integer not null,
    mass_kg ${text} not null,
    entry ${number} not null
);

create table bag_count (
    order_name ${text} not null,
    bag ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    wanted ${text} not null,
    counted ${text} not null,
    entry ${number} not null,
    primary key (order_name, bag, part, finish)
);

create table built_reading (
    entry ${number} primary key,
    order_name ${text} not null,
    of_what ${text} not null,
    value ${text} not null,
    unit ${text} not null,
    least ${text} not null,
    most ${text} not null,
    within_limits integer not null
);
create index built_reading_order on built_reading (order_name, entry);

-- What a kit asks of the stores, in millionths of the part's unit, so many days before it is due.
create table kit_need (
    needs ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    days_before integer not null,
    micro ${number} not null,
    primary key (needs, part, finish, days_before)
);

-- What the orders that are owed have not got yet; days are counted from 1970-01-01.
create table open_need (
    order_name ${text} not null,
    part ${text} not null,
    finish ${text} not null,
    day integer not null,
    micro ${number} not null,
    primary key (order_name, part, finish, day)
);
create index open_need_of on open_need (part, finish, day, micro);

alter table customer_order add column needs ${text} not null default '';

-- Which lots and pieces went into which assemblies that were made here: a recall finds the kits that such an assembly is in.
create table built_in (
    entry ${number} primary key,
    part ${text} not null,
    lot ${text} not null,
    serial ${text} not null,
    into_part ${text} not null
);
create index built_in_lot on built_in (lot, part);
create index built_in_serial on built_in (serial, part);
create index built_in_part on built_in (part);
