-- Scans of signed papers: a file lies beside its entry as personal text does.

alter table beside add column file bytea;
alter table beside drop constraint beside_erased_check;
alter table beside add constraint beside_erased_check check (
    (salt is null) = (erased_seq is not null)
    and num_nonnulls(words, file) = case when erased_seq is null then 1 else 0 end
);

create table induction_scan (
    room_id uuid not null,
    id uuid not null,
    seq bigint not null,
    induction_id uuid not null,
    media text not null constraint induction_scan_media_check
        check (media in ('application/pdf', 'image/jpeg', 'image/png')),
    bytes bigint not null constraint induction_scan_bytes_check check (bytes > 0),
    scanned_at timestamptz not null,
    removed_seq bigint,
    primary key (room_id, id),
    constraint induction_scan_seq_key unique (room_id, seq),
    constraint induction_scan_induction_fkey
        foreign key (room_id, induction_id) references induction (room_id, id)
);
create index induction_scan_induction_idx on induction_scan (room_id, induction_id);

alter table induction_scan enable row level security;
create policy induction_scan_room on induction_scan
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));
