-- A recall asks for numbers as somebody typed them: small and capital letters are the same, and each is found at once.
drop index kit_line_part;
create index kit_line_part on kit_line (lower(part), lower(revision), kit);
drop index kit_line_drawing;
create index kit_line_drawing on kit_line (lower(drawing), lower(issue), kit);
drop index built_part_part;
create index built_part_part on built_part (lower(part), lower(revision), order_name);
drop index built_part_lot;
create index built_part_lot on built_part (lower(lot), lower(part));
drop index built_part_heat;
create index built_part_heat on built_part (lower(heat), lower(part));
create index built_part_serial_said on built_part (lower(serial), lower(part));
drop index built_in_lot;
create index built_in_lot on built_in (lower(lot), lower(part));
drop index built_in_serial;
create index built_in_serial on built_in (lower(serial), lower(part));
create index received_serial_said on received_serial (lower(serial));
drop index vehicle_chassis;
create index vehicle_chassis on vehicle (lower(chassis));
create index customer_order_said on customer_order (lower(name));
-- The chassis number that an order gives itself, as it was drafted last.
create table order_chassis (
    order_name ${text} primary key,
    chassis ${text} not null
);
create index order_chassis_said on order_chassis (lower(chassis));
