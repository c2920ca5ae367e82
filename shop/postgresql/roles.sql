-- Least privilege for many stations on one PostgreSQL. Run it as the owner of the database, connected to it, once the
-- owner has opened it with `lapwright` (that makes the tables), and again after each version that changes the schema:
--
--     createdb --owner=lapwright_owner shop
--     lapwright receive FIRST-ORDER --db 'postgresql://lapwright_owner@host/shop?sslmode=verify-full'
--     psql -d shop -f roles.sql
--     psql -d shop -c "GRANT lapwright_station TO ann"        (a login role for each person or station)
--
-- A station reads and adds; it changes only what has a state; what happened (events, arrivals, orders as received) it can
-- neither change nor remove. It cannot change the schema: a newer program says so, and the owner opens the database first.
DO $$ BEGIN
    IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'lapwright_station') THEN
        CREATE ROLE lapwright_station NOLOGIN;
    END IF;
END $$;

REVOKE CREATE ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO lapwright_station;
REVOKE ALL ON ALL TABLES IN SCHEMA public FROM lapwright_station;
GRANT SELECT ON ALL TABLES IN SCHEMA public TO lapwright_station;

GRANT INSERT ON orders, arrivals, piece_events, stock_events TO lapwright_station;
GRANT INSERT, UPDATE ON pieces, piece_counts, order_counts, shop_counts, current_orders, plans, settings
    TO lapwright_station;
GRANT INSERT ON loads, receipts TO lapwright_station;
-- What a plan cuts is put right where only part of it was cut.
GRANT INSERT, DELETE ON plan_pieces TO lapwright_station;
-- An order that waited leaves the quarantine when it is taken in; its arrivals stay.
GRANT INSERT, UPDATE, DELETE ON quarantine, held_pieces, cut_ticks TO lapwright_station;
-- Whose signatures count is for the owner to say: stations only read the table of tablets.
GRANT UPDATE ON data_version TO lapwright_station;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO lapwright_station;
