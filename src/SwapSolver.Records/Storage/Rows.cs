// Every row is read by code that is written when this is built; what cannot be is a warning (.globalconfig), and so stops the build.
[module: Dapper.DapperAot]
