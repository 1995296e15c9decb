-- What all orders together have not got yet of a part, in millionths of its unit: what they lack is asked every morning.
create table part_need (
    part ${text} not null,
    finish ${text} not null,
    micro ${number} not null,
    primary key (part, finish)
);
