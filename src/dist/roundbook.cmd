@echo off
rem Starts roundbook with the Java that lies beside it. Workbooks may be named or dropped on it.
setlocal
set "here=%~dp0"
set "kept="
if exist "%here%java\lib\roundbook.aot" set kept="-XX:AOTCache=%here%java\lib\roundbook.aot"
"%here%java\bin\java.exe" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UseDynamicNumberOfCompilerThreads -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 %kept% -Dsun.reflect.inflationThreshold=100000 -Xlog:disable -Xlog:all=error:stderr -m roundbook/roundbook.app.Main %*
exit /b %errorlevel%
