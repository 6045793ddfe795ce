@echo off
rem Starts window and commands with the Java of this machine, 17 or newer.
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:+IgnoreUnrecognizedVMOptions --enable-native-access=ALL-UNNAMED --sun-misc-unsafe-memory-access=allow -cp "%~dp0lib\*;%~dp0lib\win\*" undercroft.Main %*
