-- Whether the data has the schema that a process knows is asked by who serves, and what schema a bench's backup has by
-- who takes it out. The journal says nothing of anybody.
grant select on migration to fettle_app;
